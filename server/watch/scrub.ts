const HIDDEN: readonly [RegExp, string][] = [
  // Name and word in an address of a database, of Redis, of the post.
  [/([a-z][a-z0-9+.-]*:\/\/)[^\s/@"']*@/gi, '$1...@'],
  [/([?&](?:code|state)=)[^\s&"']+/gi, '$1...'],
  [/\b(password|cookie|authorization|token)(["']?\s*[=:]\s*["']?)[^\s"',;}]+/gi, '$1$2...'],
  [/[\w.!#$%&'*+/=?^`{|}~-]+@[\w-]+(\.[\w-]+)+/g, '...@...'],
  // Tokens and their hashes are the only words this long; ids of ours are shorter.
  [/[\w-]{40,}/g, '...'],
];

/** A text for the log without what opens a door or names a mailbox, whoever wrote it into an error's message. */
export const scrub = (text: string): string => HIDDEN.reduce((clean, [what, instead]) => clean.replace(what, instead), text);
