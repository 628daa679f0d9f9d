import type { SessionView } from '../../core/agreement/wire/signIn.ts';

/** Most browsers name others beside themselves; the first that is found is meant. */
const BROWSERS: readonly [RegExp, string][] = [
  [/\bEdgA?(iOS)?\//, 'Edge'],
  [/\bOPR\//, 'Opera'],
  [/\b(Firefox|FxiOS)\//, 'Firefox'],
  [/\b((Headless)?Chrome|CriOS|Chromium)\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
];

/** What a browser says of itself, coarsely: enough for its owner to know it again, too little to tell two alike apart. */
export function deviceOf(agent: string | undefined): Pick<SessionView, 'browser' | 'device'> {
  const said = agent ?? '';
  const browser = BROWSERS.find(([pattern]) => pattern.test(said))?.[1] ?? 'other';
  if (/\biPad\b|\bTablet\b|\bAndroid\b(?!.*\bMobile\b)/.test(said)) return { browser, device: 'tablet' };
  if (/\biPhone\b|\bMobile\b/.test(said)) return { browser, device: 'phone' };
  return { browser, device: /\b(Windows NT|Macintosh|X11|CrOS)\b/.test(said) ? 'computer' : 'other' };
}
