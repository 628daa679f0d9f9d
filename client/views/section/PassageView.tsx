import type { ReactNode } from 'react';
import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { lensOf } from '../../drawing/lensOf.ts';
import { Spectacles } from '../../drawing/Spectacles.tsx';
import { UNITS, type EngravedSystem } from '../../../core/engraving/geometry.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import type { PartIndex } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import { SoundingColumn } from '../stand/SoundingColumn.tsx';
import type { FindingPlace } from './findingPlaces.ts';
import { GAP, isIn, Lane, LANE, type Span } from './Lane.tsx';
import { LEVEL_HEIGHT, LevelCurve } from './LevelCurve.tsx';
import { changesOf, clusters, desksOf } from './lanes.ts';
import { timeAxis } from '../../drawing/playedTime.ts';

interface Props {
  passage: SectionPassage;
  drawing: EngravedSystem;
  section: SectionView;
  index: PartIndex;
  places: readonly FindingPlace[];
  /** Second the rosin stands at, and the desk. */
  here: { second: number; desk: number } | null;
  /** Room for the names, staff spaces. */
  margin: number;
  label: string;
  /** How many may change within a quarter second. */
  limit: number;
  onHere(here: { second: number; desk: number }): void;
}

/** What of a passage a line of music shows. */
function spanOf({ barlines, start, end }: SectionPassage, { measures }: EngravedSystem['geometry']): Span {
  const begins = (ordinal: number) => barlines.find((barline) => barline.ordinal === ordinal)?.second;
  return { start: Math.max(start, begins(measures[0]!.ordinal) ?? start), end: Math.min(end, begins(measures.at(-1)!.ordinal + 1) ?? end) };
}

/** Desks front to back against time, under the passage as it is engraved; barlines run down through all of them. */
export function PassageView({ passage, drawing, section, index, places, here, margin, label, limit, onHere }: Props): ReactNode {
  const { geometry } = drawing;
  const x = timeAxis(passage, geometry, index);
  const desks = desksOf(passage.seats.map(({ seat }) => seat));
  const bows = new Map(passage.seats.map(({ seat, bows }) => [seat, bows]));
  const name = (seat: string | null) => section.seats.find((place) => place.seat === seat)?.person?.name ?? words.section.nobody;
  const lanes = Math.max(geometry.bottom + 6, geometry.height + 1, ...geometry.low.map(({ y1 }) => y1 + 2));
  const y = (i: number) => lanes + i * (LANE + GAP);
  const ground = y(desks.length) + 5;
  const span = spanOf(passage, geometry);
  const left = x(span.start);
  const right = x(span.end);
  const curve = ground + 3.4;
  const height = curve + LEVEL_HEIGHT;
  return (
    <svg className="music lanes" role="img" aria-label={label} viewBox={`${-margin} 0 ${geometry.width + margin} ${height}`} style={{ width: `calc(${geometry.width + margin} * var(--sp))`, height: `calc(${height} * var(--sp))` }}>
      {here && isIn(here.second, span) ? <rect className="caret" x={x(here.second) - 0.55} y="0" width="1.1" height={height} /> : null}
      <SoundingColumn geometry={geometry} y={0} height={ground} />
      <g className="sys" transform={`scale(${1 / UNITS})`} aria-hidden="true" dangerouslySetInnerHTML={{ __html: drawing.inner }} />
      {passage.barlines.filter(({ ordinal }) => geometry.measures.some((measure) => measure.ordinal === ordinal)).map(({ ordinal, second }) => (
        <g key={ordinal}>
          {second > span.start ? <path className="down" d={`M${geometry.measures.find((measure) => measure.ordinal === ordinal)?.x0 ?? x(second)} ${geometry.bottom}V${ground}`} /> : null}
          <text className="barno quiet" x={Math.max(left, geometry.measures.find((measure) => measure.ordinal === ordinal)?.x0 ?? x(second)) + 0.6} y={ground + 2.4}>
            {numberOf(index.part.measures[ordinal - 1]!)}
          </text>
        </g>
      ))}
      {desks.map(({ desk, outside, inside }, i) => (
        <g key={desk} data-desk={desk}>
          <text className="deskn" x={-margin} y={y(i) + LANE / 2 + 1.2}>
            {desk}
          </text>
          <text className="nm o" x={left - 1.2} y={y(i) + 1.7} textAnchor="end">
            {name(outside)}
          </text>
          {inside ? (
            <text className="nm" x={left - 1.2} y={y(i) + LANE - 0.1} textAnchor="end">
              {name(inside)}
            </text>
          ) : null}
          <Lane outside={bows.get(outside ?? '') ?? []} inside={bows.get(inside ?? '') ?? []} x={x} span={span} y={y(i)} />
        </g>
      ))}
      {places.filter(({ second }) => isIn(second, span)).map(({ finding, desk, second }) => {
        const i = desks.findIndex((one) => one.desk === desk);
        return (
          <g key={finding.rule + finding.place} className="clash-place" data-finding={finding.rule} onClick={() => onHere({ second, desk })}>
            <path className="clash" d={`M${x(second) - 0.9} ${y(i) - 0.4}h-.8v${LANE + 0.8}h.8M${x(second) + 0.9} ${y(i) - 0.4}h.8v${LANE + 0.8}h-.8`} />
            <Spectacles x={x(second)} y={y(i) + LANE / 2} dark={lensOf(finding.seats)} scale={0.95} />
          </g>
        );
      })}
      <g className="density">
        <path className="frogline thin" d={`M${left} ${ground}H${right}`} />
        <path className="limit" d={`M${left} ${ground - limit * 1.9 - 0.2}H${right}`} />
        {clusters(changesOf(passage).filter(({ second }) => isIn(second, span))).map((group) => {
          const at = x(group.reduce((sum, { second }) => sum + second, 0) / group.length);
          return group.map((_, i) => <path key={`${at} ${i}`} className={i >= limit ? 'den over' : 'den'} d={`M${at + 0.1} ${ground - i * 1.9 - 1.7}L${at - 0.1} ${ground - i * 1.9 - 0.35}`} />);
        })}
        {words.section.within.map((line, i) => (
          <text key={line} className="lab" x={left - 1.2} y={ground - 2.2 + i * 2.1} textAnchor="end">
            {line}
          </text>
        ))}
      </g>
      <LevelCurve passage={passage} x={x} span={span} y={curve} label={left - 1.2} />
    </svg>
  );
}
