// This file is about addresses that only this machine itself can reach.
export const isThisMachine = (host: string): boolean => /^(127(\.\d{1,3}){3}|localhost|::1|\[::1\])$/i.test(host)
