import { useCallback, useEffect, useRef, useState } from 'react';
import type { Me, PartView } from '../../../../core/agreement/wire/http.ts';
import type { PartSnapshot } from '../../../agreement/session.ts';
import { numberOf } from '../../../../core/music/printedNumber.ts';
import { noticeOf } from './noticeOf.ts';

export interface NoticeOnStand {
  /** One sentence at a time, the newest. */
  text: string | null;
  read(): void;
  wanted: boolean;
  turn(): void;
}

const keyOf = (person: string): string => `bowline/notices/${person}`;

/** Says in the ledge what concerns me as it happens, unless I turned that off; what was in the log before I came is for the list. `onNews` takes an older sentence away and stays the same from drawing to drawing. */
export function useNotice(me: Me, { roles, part }: PartView, { confirmed, caughtUp }: PartSnapshot, onNews: () => void): NoticeOnStand {
  const [wanted, setWanted] = useState(() => localStorage.getItem(keyOf(me.id)) !== 'off');
  const [text, setText] = useState<string | null>(null);
  const told = useRef<number | null>(null);
  useEffect(() => {
    if (!caughtUp) return;
    const before = told.current;
    told.current = confirmed.seq;
    if (before === null || before >= confirmed.seq || !wanted) return;
    const name = (ordinal: number) => {
      const measure = part.measures[ordinal - 1];
      return measure ? numberOf(measure) : String(ordinal);
    };
    const notice = noticeOf(confirmed, { id: me.id, roles }, before, name);
    if (!notice) return;
    setText(notice);
    onNews();
  }, [confirmed, caughtUp, wanted, me.id, roles, part, onNews]);
  const read = useCallback(() => setText(null), []);
  const turn = useCallback(() => {
    localStorage.setItem(keyOf(me.id), wanted ? 'off' : 'on');
    setWanted(!wanted);
  }, [me.id, wanted]);
  return { text, read, wanted, turn };
}
