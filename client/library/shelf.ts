import type { Me, ProgrammeView, SectionSettings, SectionView, Shelf } from '../../core/agreement/wire/http.ts';
import type { z } from 'zod';
import type { ProgrammeOverview, SinceView } from '../../core/agreement/wire/overview.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { OperationInput, OperationName } from '../../core/agreement/registry.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { InvitationView } from '../../core/agreement/wire/signIn.ts';
import { getJson, remove, sendJson } from './http.ts';
import { keptJson } from './kept/library.ts';
import { newId } from '../agreement/newId.ts';

export interface ShelfAndMe {
  me: Me;
  shelf: Shelf;
}

export async function fetchShelf(): Promise<ShelfAndMe> {
  const [me, shelf] = await Promise.all([keptJson<Me>('/me'), keptJson<Shelf>('/shelf')]);
  return { me, shelf };
}

export const addProgramme = (programme: z.input<typeof ProgrammeBody>) => sendJson<ProgrammeView>('POST', '/programmes', programme);
export const writeProgramme = (id: string, programme: z.input<typeof ProgrammeBody>) => sendJson<ProgrammeView>('PUT', `/programmes/${id}`, programme);
export const seatForProgramme = (programme: string, section: string, seats: { seat: SeatId; person: string | null }[], principal: string | null) => sendJson<ProgrammeView>('PUT', `/programmes/${programme}/sections/${section}/seating`, { seats, principal });
export const seatAsUsual = (programme: string, section: string) => remove(`/programmes/${programme}/sections/${section}/seating`);
export const fetchOverview = (programme: string) => keptJson<ProgrammeOverview>(`/programmes/${programme}/overview`);
export const fetchSince = (part: string) => keptJson<SinceView>(`/parts/${part}/since`);
export const assignPart = (part: string, section: string | null) => sendJson('PUT', `/parts/${part}/section`, { section });
export const fetchInvitations = () => getJson<{ letters: boolean; invitations: InvitationView[] }>('/invitations');
export const withdraw = (invitation: string) => remove(`/invitations/${invitation}`);
export const addSection = (name: string, instrument: string) => sendJson<SectionView>('POST', '/sections', { name, instrument });
export const seatPeople = (section: string, seats: { seat: SeatId; person: string | null }[], principal: string | null) => sendJson<SectionView>('PUT', `/sections/${section}/seating`, { seats, principal });
export const keepSettings = (section: string, settings: SectionSettings) => sendJson<SectionView>('PUT', `/sections/${section}/settings`, settings);
export const signOut = () => sendJson('POST', '/sign-out', {});

/** One operation over HTTP, where no part is open on the stand. */
export function operate<Name extends OperationName>(part: string, name: Name, input: OperationInput<Name>) {
  return sendJson('POST', `/parts/${part}/operations/${name}`, { operation: newId(), input });
}

export const exportAddress = (part: string, reader: string, form: 'musicxml' | 'mxl') => `/api/parts/${part}/export?for=${reader}&form=${form}`;
export const changesAddress = (part: string, form: 'csv' | 'text') => `/api/parts/${part}/changes?form=${form}`;
export const sourceAddress = (part: string) => `/api/parts/${part}/source`;
