export function makeLibrary(root: string, into: string): void
