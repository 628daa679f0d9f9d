import { existsSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';

/**
 * The flag tells the package to bring the shared libraries a bare machine lacks as well. It is only ever set around the import.
 */
const WITH_LIBRARIES = { AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' };
/** Unpacked once for each person on the machine: the browser is readable by its owner alone. */
const FOLDER = join(tmpdir(), `bowline-chromium-143-with-fonts-${process.getuid?.() ?? 'windows'}`);

/**
 * The package's own list of font folders names fixed ones outside its folder; where none of them exists Chromium finds no font
 * at all, and then refuses the page's own too, so that nothing on it can be read.
 */
const FONTS = `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${join(FOLDER, 'fonts')}</dir><cachedir>${join(FOLDER, 'fonts-cache')}</cachedir></fontconfig>`;

async function unpack(folder: string): Promise<void> {
  const before = { ...process.env };
  try {
    Object.assign(process.env, WITH_LIBRARIES, { TMPDIR: folder });
    const { default: packed } = await import('@sparticuz/chromium');
    await packed.executablePath();
  } finally {
    // The package adds its libraries to the environment, where they would reach the server under test.
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  }
}

async function unpackOnce(): Promise<string> {
  if (!existsSync(FOLDER)) {
    const draft = mkdtempSync(`${FOLDER}-`);
    await unpack(draft);
    writeFileSync(join(draft, 'fonts.conf'), FONTS);
    try {
      renameSync(draft, FOLDER);
    } catch (cause) {
      rmSync(draft, { recursive: true, force: true });
      if (!existsSync(FOLDER)) throw cause;
    }
  }
  return FOLDER;
}

/** A real Chromium: the one at CHROMIUM_PATH, else the one that came from the package registry. */
export async function startBrowser(): Promise<Browser> {
  const args = ['--no-sandbox', '--disable-dev-shm-usage', '--font-render-hinting=none'];
  const own = process.env.CHROMIUM_PATH;
  if (own) return chromium.launch({ executablePath: own, args });
  const folder = await unpackOnce();
  const environment = { ...process.env, LD_LIBRARY_PATH: join(folder, 'al2023', 'lib'), FONTCONFIG_FILE: join(folder, 'fonts.conf') };
  return chromium.launch({ executablePath: join(folder, 'chromium'), args, env: environment as Record<string, string> });
}
