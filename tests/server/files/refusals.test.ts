import { describe, expect, it } from 'vitest';
import { openFile } from '../../../server/files/openFile.ts';
import { GOOD, goodArchive, RELATIVES } from '../../support/hostileFiles.ts';

describe('opening a file', () => {
  it.each(RELATIVES)('refuses $name', async ({ make, code, says }) => {
    const opened = await openFile(await make(), 'upload.mxl');
    expect(opened).toMatchObject({ ok: false, fault: { code } });
    if (!opened.ok) expect(opened.fault.text).toMatch(says);
  });

  it('takes the archive they all differ from', async () => {
    expect(await openFile(goodArchive(), 'upload.mxl')).toMatchObject({ ok: true, text: GOOD });
  });
});
