// This file is about how a command ends: by the code that it gives, or, where it fails, by what went wrong in a line and no stack.

/** Runs a command with the arguments it was started with. What it throws is said on the error output, and the code is 1. */
export function endsAs(main: (args: string[]) => Promise<number>): void {
  main(process.argv.slice(2)).then(
    (code) => {
      process.exitCode = code
    },
    (fault: unknown) => {
      process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
      process.exitCode = 1
    },
  )
}
