import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';

const ENGRAVER = join(import.meta.dirname, '../../../node_modules/verovio/dist');
/** As wide and high as the stand's view at 1440x900: 170 staff spaces of 8 px. */
const PAGE = { pageWidth: 170 * 18, pageHeight: 96 * 18, scale: 100, breaks: 'auto', header: 'none', footer: 'none', svgViewBox: true, font: 'Leipzig', pageMarginLeft: 0, pageMarginRight: 0, pageMarginTop: 0, pageMarginBottom: 0 };

const BARE = `<!doctype html><title>bare</title><body><div id="page"></div><script type="module">
import createVerovioModule from '/verovio-module.mjs';
import { VerovioToolkit } from '/verovio.mjs';
const [module, text] = await Promise.all([createVerovioModule(), fetch('/part.musicxml').then((answer) => answer.text())]);
const toolkit = new VerovioToolkit(module);
toolkit.setOptions(${JSON.stringify(PAGE)});
toolkit.loadData(text);
document.getElementById('page').innerHTML = toolkit.renderToSVG(1);
requestAnimationFrame(() => { const { port1, port2 } = new MessageChannel(); port1.onmessage = () => { globalThis.shownAt = performance.now(); }; port2.postMessage(0); });
</script></body>`;

/** A page that loads the engraver and one part and shows its first page, and nothing else. */
export async function serveBare(text: () => string): Promise<{ origin: string; server: Server }> {
  const files = new Map<string, [type: string, body: () => string | Buffer]>([
    ['/', ['text/html', () => BARE]],
    ['/part.musicxml', ['application/xml', text]],
    ...['verovio-module.mjs', 'verovio.mjs'].map((name): [string, [string, () => Buffer]] => [`/${name}`, ['text/javascript', () => readFileSync(join(ENGRAVER, name))]]),
  ]);
  const server = createServer((request, reply) => {
    const found = files.get(request.url ?? '');
    reply.writeHead(found ? 200 : 404, { 'content-type': `${found?.[0] ?? 'text/plain'}; charset=utf-8` }).end(found?.[1]() ?? '');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, server };
}
