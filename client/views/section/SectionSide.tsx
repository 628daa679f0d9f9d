import type { ReactNode } from 'react';
import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import type { Finding } from '../../../core/check/finding.ts';
import type { Checker } from '../../checking/checker.ts';
import { whyText } from '../findingText.ts';
import { words } from '../../words/words.ts';
import type { FindingPlace } from './findingPlaces.ts';
import { Legend } from './Legend.tsx';
import { passageSentence } from './passageSentence.ts';
import { SectionFindings } from './SectionFindings.tsx';

interface Props {
  part: string;
  passage: SectionPassage;
  findings: readonly Finding[];
  places: readonly FindingPlace[];
  chosen: FindingPlace | undefined;
  checker: Checker | null;
  /** Printed number of a measure by its ordinal. */
  name(ordinal: number): string;
  /** The plan in words, where there is one. */
  plan: ReactNode;
  onHere(place: FindingPlace): void;
}

/** Beside the picture: how it is read, what the plan says, what is to be watched, and the picture in words. */
export function SectionSide({ part, passage, findings, places, chosen, checker, name, plan, onHere }: Props): ReactNode {
  const onChoose = (finding: Finding) => {
    const found = places.find((one) => one.finding === finding);
    if (found) onHere(found);
  };
  return (
    <aside className="side">
      <Legend />
      {plan}
      <SectionFindings part={part} findings={findings} name={name} chosen={chosen ? chosen.finding.rule + chosen.finding.place : null} why={(rule) => whyText(rule, checker?.why(rule))} onChoose={onChoose} />
      <p className="words">
        <b>{words.section.inWords}</b> {passageSentence(passage)}
      </p>
    </aside>
  );
}
