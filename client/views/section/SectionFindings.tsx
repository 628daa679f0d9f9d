import type { ReactNode } from 'react';
import { seatWords } from '../../../core/music/markWords.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { lensOf } from '../../drawing/lensOf.ts';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { go } from '../../router.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { capital } from '../../words/capital.ts';
import { words } from '../../words/words.ts';
import { findingText } from '../findingText.ts';

/** What the rules find in the passage, worst first, with a way to the place on the stand. */
export function SectionFindings({ part, findings, name, chosen, why, onChoose }: { part: string; findings: readonly Finding[]; name(ordinal: number): string; chosen: string | null; why(rule: string): string; onChoose(finding: Finding): void }): ReactNode {
  return (
    <section className="finds">
      {findings.map((finding) => {
        const key = finding.rule + finding.place;
        return (
          <article key={key} aria-current={key === chosen || undefined} data-finding={finding.rule} onClick={() => onChoose(finding)}>
            <h2>
              <SpectaclesInline dark={lensOf(finding.seats)} />
              {capital(seatWords(finding.seats, words.marks))}
            </h2>
            <p className="said">{findingText(finding, name)}</p>
            <p>{why(finding.rule)}</p>
            <p className="mend">
              <button type="button" onClick={() => go({ at: 'stand', part, measure: finding.measure })}>
                {words.section.onStand}
              </button>{' '}
              <PlaceLink to={{ at: 'rules', rule: finding.rule }}>{words.rules.why}</PlaceLink>
            </p>
          </article>
        );
      })}
    </section>
  );
}
