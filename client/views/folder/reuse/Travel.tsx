import { useState, type ReactNode } from 'react';
import type { TravelView } from '../../../../core/archive/wire.ts';
import { fetchTravel, sendBows } from '../../../library/archive.ts';
import { Tick } from '../../../ui/Tick.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import { broughtSentence } from './brought.ts';

/** Where the other sections play what the part in hand plays: ticked, its bows are laid with their principals as slips. */
export function Travel({ work, part, act, say }: { work: string; part: string; act: Act; say(sentence: string): void }): ReactNode {
  const [found, setFound] = useState<TravelView['passages'] | null>(null);
  const [out, setOut] = useState<ReadonlySet<string>>(new Set());
  const look = () => void act(async () => setFound((await fetchTravel(work, part)).passages));
  if (!found) {
    return (
      <button type="button" onClick={look}>
        {words.reuse.travelLook}
      </button>
    );
  }
  if (!found.length) return <p className="none">{words.reuse.travelNone}</p>;
  const chosen = found.filter(({ key }) => !out.has(key));
  const turn = (key: string, on: boolean) => setOut((before) => new Set(on ? [...before].filter((one) => one !== key) : [...before, key]));
  const send = () => {
    say(words.reuse.working);
    void act(async () => {
      const brought = await sendBows(work, part, chosen.map(({ key }) => key));
      setFound((await fetchTravel(work, part)).passages);
      return broughtSentence(brought);
    });
  };
  return (
    <>
      <ul className="passages">
        {found.map(({ key, section, name, numbers, from, to, marks, likeness }) => (
          <li key={key}>
            <Tick checked={!out.has(key)} onTurn={(on) => turn(key, on)}>
              {words.reuse.passage(section ?? name, words.inMeasures(numbers[0] || String(from), numbers[1] || String(to)), marks)}, {words.reuse.likeness[likeness]}
            </Tick>
          </li>
        ))}
      </ul>
      <button type="button" disabled={!chosen.length} onClick={send}>
        {words.reuse.send(chosen.length)}
      </button>
    </>
  );
}
