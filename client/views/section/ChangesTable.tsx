import type { ReactNode } from 'react';
import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { quarters } from '../../../core/music/time.ts';
import { beatOf } from '../../../core/music/metre.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import type { PartIndex } from '../../library/partIndex.ts';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';

/** The picture row by row, for whoever reads rather than looks. */
export function ChangesTable({ passage, section, index }: { passage: SectionPassage; section: SectionView; index: PartIndex }): ReactNode {
  const name = (seat: string) => section.seats.find((place) => place.seat === seat)?.person?.name ?? words.section.nobody;
  const moment = ({ begins }: SectionPassage['seats'][number]['bows'][number]) => {
    const measure = index.part.measures[begins.measure - 1]!;
    return words.section.moment(numberOf(measure), String(Math.round((quarters(begins.at) / quarters(beatOf(measure)) + 1) * 100) / 100));
  };
  return (
    <Fold className="changes-table" word={words.section.table}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.section.seat}</th>
            <th scope="col">{words.section.changes}</th>
          </tr>
        </thead>
        <tbody>
          {passage.seats.map(({ seat, bows }) => (
            <tr key={seat}>
              <th scope="row">
                {words.seat.one(seat)}, {name(seat)}
              </th>
              <td>{bows.slice(1).map(moment).join(' · ') || words.section.noChange}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
