import { randomInt } from 'node:crypto';
import type { Trouble } from '../../core/agreement/wire/http.ts';

const BIRDS = ['heron', 'plover', 'linnet', 'curlew', 'dipper', 'siskin', 'avocet', 'wigeon', 'godwit', 'merlin', 'dunlin', 'gannet', 'petrel', 'osprey', 'smew', 'teal'];
const WEATHER = ['calm', 'brisk', 'misty', 'bright', 'frosty', 'windy', 'mild', 'clear', 'grey', 'early', 'late', 'high', 'low', 'still', 'warm', 'cool'];

/** A name for a fault that can be said over the telephone and found in the log. Example: "misty heron 4127". */
export function incidentName(): string {
  return `${WEATHER[randomInt(WEATHER.length)]} ${BIRDS[randomInt(BIRDS.length)]} ${randomInt(1000, 10_000)}`;
}

/** What is said of a fault of ours to whoever met it. */
export const faultCalled = (incident: string): Trouble => ({ code: 'FAULT', text: `Something broke in the library, and it is not your doing. Tell whoever looks after Bowline this name: ${incident}.`, incident });
