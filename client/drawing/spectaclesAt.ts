import type { Lens } from '../../core/engraving/marks/placeMarks.ts';

export interface SpectaclesPaths {
  open: string;
  dark: string;
  bridges: string;
}

const lens = (x: number, y: number, r: number): string => `M${(x - r).toFixed(2)} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

/** Many spectacles as three strokes, where the pencil sign drawn one by one would be more than a browser paints in a frame. All at one height. */
export function spectaclesAt(places: readonly { x: number; dark: Lens }[], y: number, scale: number): SpectaclesPaths {
  const paths: SpectaclesPaths = { open: '', dark: '', bridges: '' };
  const s = (value: number) => Number((value * scale).toFixed(2));
  for (const { x, dark } of places) {
    paths[dark === 'outside' ? 'open' : 'dark'] += lens(x - s(0.82), y, s(0.6));
    paths[dark === 'inside' ? 'open' : 'dark'] += lens(x + s(0.82), y, s(0.6));
    const at = x.toFixed(2);
    paths.bridges += `M${at} ${y}m${s(-0.24)} ${s(-0.12)}q${s(0.24)} ${s(-0.3)} ${s(0.48)} 0m${s(-1.64)} ${s(-0.08)}l${s(-0.46)} ${s(-0.42)}m${s(3.26)} ${s(0.42)}l${s(0.46)} ${s(-0.42)}`;
  }
  return paths;
}
