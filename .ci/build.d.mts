/** Writes everything into the folder and names what it wrote. */
export function bundle(root: string, into: string): Promise<unknown>
