// This file is about the worked examples of the reference book that we do not reproduce, each with its reason.

export const explained: Readonly<Record<string, string>> = {}
