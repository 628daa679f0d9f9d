import { useState, type ReactNode } from 'react';
import { letGo, signOut, stand, type SomebodyHere, type Standing } from '../../library/people.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

interface Props {
  person: SomebodyHere;
  isMe: boolean;
  act: Act;
}

/** What a librarian may change about somebody; what is hard to take back is asked once more, and so is everything about oneself. */
export function PersonActions({ person: { id, name, librarian, deputy }, isMe, act }: Props): ReactNode {
  const [asked, setAsked] = useState<{ sentence: string; work: () => Promise<string> } | null>(null);
  const become = (standing: Standing, what: string) => async () => {
    await stand(id, standing, isMe);
    return words.people.changed(name, what);
  };
  const go = async () => {
    await letGo(id, isMe);
    return words.people.left(name);
  };
  const out = async () => words.people.signedOut(name, await signOut(id));
  const ask = (sentence: string, work: () => Promise<string>) => setAsked({ sentence: isMe ? `${words.people.yourself} ${sentence}` : sentence, work });
  if (asked) {
    return (
      <div className="person-acts" role="group" aria-label={name}>
        <p>{asked.sentence}</p>
        <button type="button" autoFocus onClick={() => void act(asked.work).then(() => setAsked(null))}>
          {words.people.sure}
        </button>{' '}
        <button type="button" onClick={() => setAsked(null)}>
          {words.people.rather}
        </button>
      </div>
    );
  }
  const noMore = become({ librarian: false, deputy }, words.people.member);
  return (
    <div className="person-acts" role="group" aria-label={name}>
      {librarian ? (
        <button type="button" onClick={() => (isMe ? ask('', noMore) : void act(noMore))}>
          {words.people.takeRole}
        </button>
      ) : (
        <button type="button" onClick={() => void act(become({ librarian: true, deputy: false }, words.folder.library))}>
          {words.people.giveRole}
        </button>
      )}{' '}
      {librarian ? null : (
        <button type="button" onClick={() => void act(become({ librarian: false, deputy: !deputy }, deputy ? words.people.member : words.people.deputy))}>
          {deputy ? words.people.makeMember : words.people.makeDeputy}
        </button>
      )}{' '}
      {isMe ? null : (
        <button type="button" onClick={() => ask(words.people.signOutSure(name), out)}>
          {words.people.signOut}
        </button>
      )}{' '}
      <button type="button" onClick={() => ask(words.people.leavesSure(name), go)}>
        {words.people.leaves}
      </button>
    </div>
  );
}
