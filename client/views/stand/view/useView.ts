import { useEffect, useReducer, type Dispatch } from 'react';
import { viewFrom, viewReducer, viewText, type View, type ViewAction } from '../../../tools/view/reducer.ts';

const KEY = 'bowline/view';

/** How the part lies on this stand; kept in this browser. */
export function useView(): [View, Dispatch<ViewAction>] {
  const [view, turn] = useReducer(viewReducer, null, () => viewFrom(localStorage.getItem(KEY)));
  useEffect(() => localStorage.setItem(KEY, viewText(view)), [view]);
  return [view, turn];
}
