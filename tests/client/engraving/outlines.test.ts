import { describe, expect, it } from 'vitest';
import { layOut } from '../../../client/engraving/engraver.ts';
import { outlined } from '../../../client/engraving/outlines.ts';
import { chance } from '../../support/chance.ts';
import { longPart } from '../../support/longPart.ts';
import { partXml } from '../../support/partXml.ts';

const SQUARE = { gE0A4: '<path transform="scale(1,-1)" d="M0 100h50v-50h-50z" />', gE0A5: '<path d="M0 0h1"/>' };

describe('outlines of music signs', () => {
  it('stand where the reference put them: turned over, scaled, then moved', () => {
    // By hand: (0, 100) upward is (0, -100) on the page, half of it (0, -50), moved (200, 250); 50 to the right is 25, 50 down 25.
    expect(outlined('<g class="note"><use href="#gE0A4" transform="translate(200, 300) scale(0.5, 0.5)" /></g>', SQUARE)).toBe('<g class="note"><path class="ink" d="M200 250h25v25h-25z"/></g>');
  });

  it('in another form stand inside a group with what was said of them', () => {
    expect(outlined('<use href="#gE0A5" transform="rotate(90)"></use>', SQUARE)).toBe('<g transform="rotate(90)"><path d="M0 0h1"/></g>');
  });

  it('take the place of every reference in what the engraver draws', async () => {
    const laid = await layOut({ text: partXml(longPart(8, chance(1)), 'Short'), width: 100, spacing: 0.5, oneLine: false });
    const drawn = laid.draw(0).drawing.inner;
    expect(drawn).not.toContain('<use');
    expect(drawn.match(/<path class="ink"/g)!.length).toBeGreaterThan(10);
  });
});
