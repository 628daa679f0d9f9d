import type { DifferenceView, RevisionsView, RevisionView } from '../../core/agreement/wire/revisions.ts';
import type { ErratumView } from '../../core/archive/erratum.ts';
import type { KeptSetView, KeptUnder } from '../../core/archive/keptSet.ts';
import type { BroughtIn, OfferView, TakenIn, TravelView } from '../../core/archive/wire.ts';
import { newId } from '../agreement/newId.ts';
import { getJson, sendFile, sendJson } from './http.ts';

export const fetchSets = () => getJson<KeptSetView[]>('/archive');
export const archiveAddress = '/api/archive/export';
export const takeIn = (file: File) => sendFile<TakenIn>('/archive', file);

export const fetchOffers = (work: string) => getJson<OfferView[]>(`/works/${work}/offers`);
export const keepMarks = (work: string, under: KeptUnder) => sendJson<KeptSetView[]>('POST', `/works/${work}/keep`, under);
export const bringIn = (work: string, set: string, ink: boolean) => sendJson<BroughtIn>('POST', `/works/${work}/bring-in`, { id: newId(), set, ink });

export const fetchTravel = (work: string, from: string) => getJson<TravelView>(`/works/${work}/travel?from=${from}`);
export const sendBows = (work: string, from: string, keys: readonly string[]) => sendJson<BroughtIn>('POST', `/works/${work}/travel`, { id: newId(), from, keys });

export const fetchErrata = (work: string) => getJson<ErratumView[]>(`/works/${work}/errata`);
export const errataAddress = (work: string) => `/api/works/${work}/errata?form=csv`;
export const writeErratum = (part: string, measure: number, says: string, should: string) => sendJson<ErratumView>('POST', `/parts/${part}/errata`, { measure, says, should });
export const settleErratum = (id: string, settled: boolean) => sendJson('PUT', `/errata/${id}/settled`, { settled });

export const erasuresAddress = (part: string) => `/api/parts/${part}/erasures`;
export const fetchRevisions = (part: string) => getJson<RevisionsView>(`/parts/${part}/revisions`);
export const fetchRevision = (part: string, seq: number) => getJson<RevisionView>(`/parts/${part}/revisions/${seq}`);
export const fetchDifference = (part: string, from: number, to: number) => getJson<DifferenceView>(`/parts/${part}/difference?from=${from}&to=${to}`);
