// This file is about how a command is typed: by its own name where the package is installed, through npm in a clone.

/** `plumbpost ask`, or `npm run --silent ask --`. */
export const typed = (command: string): string =>
  /[\\/]plumbpost(\.mjs)?$/.test(process.argv[1] ?? '') ? `plumbpost ${command}` : `npm run --silent ${command} --`
