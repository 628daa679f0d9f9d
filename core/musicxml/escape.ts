const ILLEGAL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/**
 * Character data for a document in an encoding that may lack some characters: those become numeric references, characters XML forbids are left out.
 * Example: with a Latin-1 test, "Ⅳ & x" becomes "&#x2163; &amp; x".
 */
export function escaped(text: string, expressible: (character: string) => boolean): string {
  const plain = text.replace(ILLEGAL, '').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
  return Array.from(plain, (character) => (expressible(character) ? character : `&#x${character.codePointAt(0)?.toString(16).toUpperCase()};`)).join('');
}

/** A text as character data or the value of an attribute of a document in Unicode. Example: `xmlText('Ⅳ & "x"')` is "Ⅳ &amp; &quot;x&quot;". */
export const xmlText = (text: string): string => escaped(text, () => true).replace(/"/g, '&quot;');
