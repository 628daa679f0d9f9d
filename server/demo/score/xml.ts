const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

export const escape = (text: string): string => text.replace(/[&<>"]/g, (c) => ESCAPES[c]!);

/** An element with text or child elements; an empty one without content. */
export function element(name: string, content: string | number = '', attributes: Record<string, string | number> = {}): string {
  const start = `${name}${Object.entries(attributes).map(([key, value]) => ` ${key}="${escape(String(value))}"`).join('')}`;
  return content === '' ? `<${start}/>` : `<${start}>${content}</${name}>`;
}
