import type { Plugin } from 'vite';

const MODULE = /verovio\/dist\/verovio-module\.mjs$/;
const TEXT = /binaryDecode\(('(?:\\[\s\S]|[^'\\])*')\)/;
const READING = 'wasmBinaryFile??=findWasmBinary();var result=await instantiateAsync(wasmBinary,wasmBinaryFile,info);';

/** The program that the engraver's package carries as a text. Its letters are its bytes, but for 0, which is written as 256. */
const bytesOf = (literal: string): Uint8Array => Uint8Array.from(new Function(`return ${literal}`)() as string, (letter) => letter.charCodeAt(0) & 255);

/**
 * Lays the engraver's program beside its script as a file of its own. The package carries it inside the script as a text of seven million
 * letters, which a browser must read as a script and decode before it may begin to compile; a file is compiled while it arrives, and a
 * browser keeps what it compiled.
 */
export function engraverFile(): Plugin {
  return {
    name: 'engraver-file',
    apply: 'build',
    transform(code, id) {
      if (!MODULE.test(id)) return null;
      const literal = TEXT.exec(code)?.[1];
      if (!literal || !code.includes(READING)) return this.error('The engraver carries its program in another way than it did: see engraverFile.config.ts.');
      const file = this.emitFile({ type: 'asset', name: 'engraver.wasm', source: bytesOf(literal) });
      return { code: code.replace(literal, () => "''").replace(READING, () => `var result=await WebAssembly.instantiateStreaming(fetch(import.meta.ROLLUP_FILE_URL_${file}),info);`), map: null };
    },
  };
}
