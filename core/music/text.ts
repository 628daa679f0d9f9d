/** Signs that no XML document can hold: what steers a terminal, and halves of signs (XML 1.0, fifth edition, 2.2). */
 
const UNWRITABLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Cs}/u;

/** Whether a text can stand in a score, a table and a letter. Example: "Ⅳ & <frog>" can, one with a half of a pair cannot. */
export const canBeWritten = (text: string): boolean => !UNWRITABLE.test(text);

export const NOT_WRITTEN = 'words are made of letters';
