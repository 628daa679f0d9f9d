import type { ReactNode } from 'react';
import type { Desk } from '../desk.ts';
import { pointing, useIsPointed } from '../pointed.ts';

/** A note's row in a table of steps: it lights its note on the staff and in the pictures, and is lit by them; its name puts the rosin there. */
export function StepRow({ desk, note, pitch, texts }: { desk: Desk; note: string; pitch: string; texts: readonly string[] }): ReactNode {
  const pointed = useIsPointed(note);
  return (
    <tr className={pointed || note === desk.caret.at ? 'lit' : undefined} data-step={note} {...pointing(note)}>
      <th scope="row">
        <button type="button" onClick={() => desk.move({ type: 'put', at: note })}>
          {pitch}
        </button>
      </th>
      {texts.map((text, i) => (
        <td key={i}>{text}</td>
      ))}
    </tr>
  );
}
