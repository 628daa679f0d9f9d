import { useEffect, type MouseEvent, type ReactNode } from 'react';
import { addressOf, go, type Place } from '../router.ts';
import { words } from '../words/words.ts';
import { rememberAddress, rememberFolder, rememberPart, useRemembered } from './remembered.ts';

const ORDER = ['shelf', 'folder', 'stand', 'section'] as const;
const BY_DIGIT = [...ORDER, 'archive'] as const;

/** Shelf, Folder, Stand, Section: always bottom left, Alt+1 to 4; the archive, seldom gone to, is Alt+5 and a link on the shelf. A place not yet visited leads nowhere. */
export function Places({ here }: { here: Place }): ReactNode {
  const known = useRemembered();
  useEffect(() => {
    rememberAddress(addressOf(here));
    if (here.at === 'folder') rememberFolder(here.programme);
    if (here.at === 'stand') rememberPart(here.part, here.measure);
    if (here.at === 'section' || here.at === 'revisions' || here.at === 'changed') rememberPart(here.part);
  }, [here]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const place = event.altKey ? BY_DIGIT[Number(/^Digit([1-5])$/.exec(event.code)?.[1] ?? 0) - 1] : undefined;
      const target = place && known[place];
      if (!target) return;
      event.preventDefault();
      go(target);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
  const follow = (event: MouseEvent, target: Place) => {
    if (event.metaKey || event.ctrlKey) return;
    event.preventDefault();
    go(target);
  };
  return (
    <nav className="places" aria-label={words.places.label}>
      {ORDER.map((place) => {
        const target = known[place];
        return target ? (
          <a key={place} href={addressOf(target)} aria-current={here.at === place ? 'page' : undefined} onClick={(event) => follow(event, target)}>
            {words.places[place]}
          </a>
        ) : (
          <a key={place} aria-disabled="true">
            {words.places[place]}
          </a>
        );
      })}
    </nav>
  );
}
