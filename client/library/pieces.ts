import type { PieceCheck, PieceFinding } from '../../core/agreement/wire/piece.ts';
import { getJson, remove, sendJson } from './http.ts';

const address = (work: string) => `/works/${work}/check`;

export const fetchPieceCheck = (work: string) => getJson<PieceCheck>(address(work));
export const lookThroughPiece = (work: string) => sendJson<PieceCheck>('POST', address(work), {});
export const stopLooking = (work: string) => remove(address(work));
export const pieceFindings = (work: string, part: string) => getJson<PieceFinding[]>(`${address(work)}/parts/${part}`);
