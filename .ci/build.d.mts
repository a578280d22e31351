/** Writes everything into the folder and names what it wrote. */
export function bundle(root: string, into: string): Promise<unknown>
/** Writes one program by itself, its packages left outside. */
export function bundleOne(root: string, source: string, into: string): Promise<void>
