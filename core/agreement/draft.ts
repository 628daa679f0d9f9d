import type { AgreementState } from './state.ts';

type List = 'proposals' | 'comments' | 'mutes' | 'ink' | 'letters';

/** A state in the making: its lists are shared with the state it came from until they are first changed. */
export interface Draft {
  state: AgreementState;
  own: Set<List>;
}

/** A list of the draft that may be changed in place; what stands in it is still shared and must be replaced, not changed. Example: `change(draft, 'ink').push(mark)`. */
export function change<Name extends List>(draft: Draft, name: Name): AgreementState[Name] {
  if (!draft.own.has(name)) {
    const shared: AgreementState[List] = draft.state[name];
    draft.state[name] = (Array.isArray(shared) ? [...shared] : { ...shared }) as AgreementState[Name];
    draft.own.add(name);
  }
  return draft.state[name];
}
