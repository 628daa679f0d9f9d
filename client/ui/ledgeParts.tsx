import { Toolbar } from '@base-ui/react/toolbar';
import type { ReactNode } from 'react';

/** One key of a row on the ledge: what it shows, the key on the keyboard, and what it does. */
export function LedgeKey({ label, cap, onPress, pressed, children }: { label: string; cap?: string; onPress: () => void; pressed?: boolean; children: ReactNode }): ReactNode {
  return (
    <Toolbar.Button className="ledge-key" title={cap ? `${label} (${cap})` : label} aria-pressed={pressed} onClick={onPress} onMouseDown={(event) => event.preventDefault()}>
      <span className="offstage">{label}</span>
      {children}
      {cap ? <Cap cap={cap} /> : null}
    </Toolbar.Button>
  );
}

/** The key on the keyboard; Shift as the arrow that is printed on it. */
function Cap({ cap }: { cap: string }): ReactNode {
  const shifted = cap.startsWith('Shift ');
  return (
    <small aria-hidden="true">
      {shifted ? (
        <svg className="shift" viewBox="0 0 9 9">
          <path d="M4.5 .6L8.2 4.4H6.2V8.2H2.8V4.4H.8Z" />
        </svg>
      ) : null}
      {shifted ? cap.slice(6) : cap}
    </small>
  );
}

/** A word that does something, after its key, or for the finger where it has none; such words stand in a line under the sentence. */
export function LedgeMove({ word, short, cap = '', onPress, on = false, big = false }: { word: string; short: string; cap?: string; onPress: () => void; on?: boolean; /** In large letters on a phone. */ big?: boolean }): ReactNode {
  return (
    <button type="button" className={['ledge-move', on && 'on', big && 'big', !cap && 'by-touch'].filter(Boolean).join(' ')} title={word} onClick={onPress} onMouseDown={(event) => event.preventDefault()}>
      {cap ? <b aria-hidden="true">{cap}</b> : null} <span aria-hidden="true">{short}</span>
      <span className="offstage">{word}</span>
    </button>
  );
}

/** A word in large letters that does something to what is chosen, with its key below. */
export function LedgeWord({ word, cap, onPress, on = false }: { word: string; cap?: string; onPress: () => void; on?: boolean }): ReactNode {
  return (
    <button type="button" className={on ? 'ledge-word on' : 'ledge-word'} onClick={onPress} onMouseDown={(event) => event.preventDefault()}>
      <b>{word}</b>
      {cap ? <small aria-hidden="true">{cap}</small> : null}
    </button>
  );
}
