import { expect, it } from 'vitest';
import { scriptOf } from '../../../client/offline/newer.ts';

it('a page is told from an older one by the script it begins with', () => {
  const page = (name: string) => `<!doctype html><head><script type="module" crossorigin src="/assets/${name}.js"></script></head>`;
  expect(scriptOf(page('index-a1'))).toBe('/assets/index-a1.js');
  expect(scriptOf(page('index-b2'))).not.toBe(scriptOf(page('index-a1')));
  expect(scriptOf('<p>502 Bad Gateway</p>')).toBeNull();
});
