import type { FormEvent, ReactNode } from 'react';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { DYNAMICS, type Dynamic } from '../../../core/bowing/bowLength.ts';
import { OPEN_STRINGS, type OpenStrings } from '../../../core/fingering/aims.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { InstrumentName } from '../../../core/music/part.ts';
import { keepSettings } from '../../library/shelf.ts';
import { OneOf } from '../../ui/OneOf.tsx';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import { isUsual, settledOf, SHARES, withoutSettled, withSettled } from './settledNumbers.ts';

type Attempt = (act: () => Promise<string>) => Promise<void>;

const shareWord = (one: number): string => (one === SHARES.strict ? words.settled.strict : one === SHARES.ordinary ? words.settled.ordinary : words.settled.ownShare(Math.round(one * 100)));

/** What the section has settled for all its parts; read by everybody in it, changed by its principal or the librarian. */
export function SettledForm({ section, mayChange, attempt, again }: { section: SectionView; mayChange: boolean; attempt: Attempt; again(): void }): ReactNode {
  const { settings } = section;
  const settled = settledOf(settings);
  const keep = (next: SectionView['settings'], sentence: string) =>
    void attempt(async () => {
      await keepSettings(section.id, next);
      again();
      return sentence;
    });
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    const bowSeconds = Object.fromEntries(DYNAMICS.map((dynamic) => [dynamic, Number(said.get(dynamic))])) as Record<Dynamic, number>;
    keep(withSettled(settings, { openStrings: said.get('openStrings') as OpenStrings, bowSeconds, togetherShare: Number(said.get('togetherShare')) }), words.settled.kept);
  };
  const shares = [...new Set([SHARES.strict, SHARES.ordinary, settled.togetherShare])];
  const share = instrumentNamed(section.instrument as InstrumentName).bowShare;
  return (
    <Fold className="folded settled rows" word={words.settled.title(section.name)}>
      <p>{mayChange ? words.settled.what : words.settled.whoSets}</p>
      <form onSubmit={onSubmit} key={JSON.stringify(settings)}>
        <fieldset disabled={!mayChange}>
          <legend>{words.settled.openStrings}</legend>
          <OneOf label={words.settled.openStrings} name="openStrings" first={settled.openStrings} disabled={!mayChange} options={OPEN_STRINGS.map((one) => ({ value: one, word: words.settled.open[one] }))} />
        </fieldset>
        <fieldset disabled={!mayChange}>
          <legend>{words.settled.bowLasts}</legend>
          <p>{share === 1 ? words.settled.bowWhat : words.settled.bowShare(words.shelf.instruments[section.instrument]!, Math.round(share * 100))}</p>
          <div className="by-dynamic">
            {DYNAMICS.map((dynamic) => (
              <label key={dynamic}>
                <span aria-hidden="true">{dynamic}</span>
                <input type="number" name={dynamic} aria-label={words.settled.secondsAt(dynamic)} min={0.1} max={120} step={0.1} required defaultValue={settled.bowSeconds[dynamic]} />
              </label>
            ))}
          </div>
        </fieldset>
        <fieldset disabled={!mayChange}>
          <legend>{words.settled.atOnce}</legend>
          <OneOf label={words.settled.atOnce} name="togetherShare" first={String(settled.togetherShare)} disabled={!mayChange} options={shares.map((one) => ({ value: String(one), word: shareWord(one) }))} />
        </fieldset>
        {mayChange ? (
          <p className="does">
            <button type="submit">{words.settled.keep}</button>
            <button type="button" disabled={isUsual(settings)} onClick={() => keep(withoutSettled(settings), words.settled.usualAgain)}>
              {words.settled.usual}
            </button>
          </p>
        ) : null}
      </form>
    </Fold>
  );
}
