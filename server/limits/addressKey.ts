import { isIPv4, isIPv6 } from 'node:net';

/** What a reader's address counts as: an IPv6 one as its network of 64 bits, since one reader has a whole network of them. */
export function addressKey(address: string): string {
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '');
  if (isIPv4(plain) || !isIPv6(plain)) return plain;
  const [start, end] = plain.replace(/%.*$/, '').split('::') as [string, string?];
  const before = start === '' ? [] : start.split(':');
  const after = end === undefined || end === '' ? [] : end.split(':');
  const filled = end === undefined ? before : [...before, ...Array<string>(8 - before.length - after.length).fill('0'), ...after];
  return filled.slice(0, 4).map((group) => parseInt(group, 16).toString(16)).join(':');
}
