import type { z } from 'zod';
import type { GoneView, NewPerson, Shelf } from '../../core/agreement/wire/http.ts';
import type { TrailView } from '../../core/agreement/wire/trail.ts';
import { getJson, remove, send, sendJson } from './http.ts';

export type SomebodyHere = Shelf['people'][number];
export interface Standing {
  librarian: boolean;
  deputy: boolean;
}

/** The link is null where the invitation went by letter. */
export const addPerson = (name: string, { librarian, deputy }: Standing, letter?: z.input<typeof NewPerson>['letter']) => sendJson<{ link: string | null }>('POST', '/people', { name, librarian, deputy, ...(letter ? { letter } : {}) });
export const linkFor = (person: string) => sendJson<{ link: string }>('POST', `/people/${person}/link`, {});
export const stand = (person: string, standing: Standing, myself: boolean) => sendJson('PUT', `/people/${person}/standing`, { ...standing, myself });
export const letGo = (person: string, myself: boolean) => remove(`/people/${person}?myself=${myself}`);
export const signOut = async (person: string): Promise<number> => ((await (await send(`/people/${person}/sessions`, { method: 'DELETE' })).json()) as { ended: number }).ended;
export const fetchGone = async () => (await getJson<GoneView>('/people/gone')).gone;
export const takeBack = (person: string) => sendJson('POST', `/people/${person}/back`, { librarian: false, deputy: false });
export const eraseGone = (person: string, name: string, comments: boolean) => sendJson('POST', `/people/${person}/erase`, { name, comments });

export const lookInto = (ensemble: string) => sendJson('PUT', '/me/ensemble', { ensemble });
export const nameEnsemble = (name: string) => sendJson('PUT', '/ensemble', { name });

export const keptAddress = '/api/me/kept';
export const eraseMe = (name: string, comments: boolean) => sendJson('POST', '/me/erase', { name, comments });

export function fetchTrail(person: string, kind: string, before: string | null): Promise<TrailView> {
  const asked = new URLSearchParams({ ...(person && { person }), ...(kind && { kind }), ...(before !== null && { before }) });
  return getJson<TrailView>(`/trail?${asked.toString()}`);
}
