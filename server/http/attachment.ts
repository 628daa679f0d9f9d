/** Saved under its name, never opened in the browser. */
export function attachment(fileName: string): string {
  const plain = fileName.replace(/[^\w .,()-]/g, '_');
  return `attachment; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(fileName).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)}`;
}
