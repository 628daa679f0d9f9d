import type { LettersView } from '../../core/agreement/wire/http.ts';
import type { Language } from '../words/language.ts';
import { getJson, remove, sendJson } from './http.ts';

export const fetchLetters = () => getJson<LettersView>('/me/letters');
export const keepLetters = (address: string, language: Language) => sendJson<LettersView>('PUT', '/me/letters', { address, language });
export const forgetLetters = () => remove('/me/letters');
