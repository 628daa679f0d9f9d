import type { Me } from '../../core/agreement/wire/http.ts';
import type { MySignIn, WaysIn } from '../../core/agreement/wire/signIn.ts';
import type { Language } from '../words/language.ts';
import { words } from '../words/words.ts';
import { getJson, Refused, remove, send, sendJson } from './http.ts';

/** What the library answered about signing in, in the language that is spoken; else as it came. */
export function inWords(fault: unknown): unknown {
  const said = fault instanceof Refused ? words.signIn.troubles[fault.trouble.code] : undefined;
  return said === undefined ? fault : new Error(said);
}

export const isRefusedFor = (fault: unknown, code: string): boolean => fault instanceof Refused && fault.trouble.code === code;

export const fetchWays = () => getJson<WaysIn>('/sign-in');
export const enterWithLink = (token: string) => sendJson('POST', '/sign-in', { token });
/** Takes an invitation up as the one who is signed in here. */
export const takeUp = (token: string) => sendJson('POST', '/me/invitations', { token });
/** By name, who is signed in here by a way that reaches all their ensembles; null where nobody is. */
export async function whoIsHere(): Promise<string | null> {
  try {
    const [{ name }, { only }] = await Promise.all([getJson<Me>('/me'), fetchMySignIn()]);
    return only === null ? name : null;
  } catch {
    return null;
  }
}
export const enterWithPassword = (address: string, password: string) => sendJson('POST', '/sign-in/password', { address, password });
export const wantLetter = (address: string) => sendJson<{ minutes: number }>('POST', '/sign-in/letter', { address });
/** Where the browser goes. */
export const goToIdentity = async (invitation?: string): Promise<string> => (await sendJson<{ go: string }>('POST', '/sign-in/identity', invitation === undefined ? {} : { invitation })).go;

export const fetchMySignIn = () => getJson<MySignIn>('/me/sign-in');
export const prove = (password: string) => sendJson<MySignIn>('POST', '/me/proof', { password });
export const keepAddress = (address: string | null, language: Language) => sendJson<MySignIn>('PUT', '/me/address', { address, language });
export const confirmAddress = (token: string) => sendJson<MySignIn>('POST', '/me/address/confirm', { token });
export const setPassword = (password: string | null) => sendJson<MySignIn>('PUT', '/me/password', { password });
export const bindIdentity = async (): Promise<string> => (await sendJson<{ go: string }>('POST', '/me/identity', {})).go;
export const forgetIdentity = () => remove('/me/identity');
export const endSession = async (id: string): Promise<{ signedOut?: boolean }> => (await (await send(`/me/sessions/${id}`, { method: 'DELETE' })).json()) as { signedOut?: boolean };
export const endOtherSessions = () => remove('/me/sessions');
