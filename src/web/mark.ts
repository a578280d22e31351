// This file is about the mark: a plumb bob on its line.

export const mark = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" fill="#fbf7ea"/><path d="M16 2v10" stroke="#22303c" stroke-width="2"/><path d="M12 12h8l-1 7-3 10-3-10z" fill="#8a4b12" stroke="#22303c" stroke-width="1.5" stroke-linejoin="round"/></svg>`
