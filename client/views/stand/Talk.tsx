import type { ReactNode } from 'react';
import { piecesOf } from '../../tools/line/mentions.ts';
import { words } from '../../words/words.ts';
import { isPrincipal, type Desk } from './desk.ts';
import { submit } from './lay.ts';

/** What people said about a slip, or about the measure itself; what is settled stays readable, in one short line. */
export function Talk({ desk, measure, proposal }: { desk: Desk; measure: number; proposal: string | null }): ReactNode {
  const said = Object.values(desk.state.comments).filter((comment) => comment.measure === measure && comment.proposal === proposal);
  const about = proposal === null ? said : Object.values(desk.state.comments).filter((comment) => comment.proposal === proposal);
  return about
    .sort((a, b) => a.made.seq - b.made.seq)
    .map((comment) => (
      <div key={comment.id} className={comment.resolved ? 'talk settled' : 'talk'} data-comment={comment.id}>
        <b>{comment.made.name}</b>{' '}
        {piecesOf(comment.text, comment.mentions).map(({ text, person }, i) => (person === null ? text : <b key={i} className={person === desk.me.id ? 'named mine' : 'named'}>@{text}</b>))}{' '}
        {comment.resolved ? (
          <small>{words.slip.settled(comment.resolved.name)}</small>
        ) : comment.made.by === desk.me.id || isPrincipal(desk) ? (
          <button type="button" onClick={() => submit(desk, 'resolveComment', { id: comment.id })}>
            {words.slip.settle}
          </button>
        ) : null}
      </div>
    ));
}
