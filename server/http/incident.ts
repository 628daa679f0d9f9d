import { randomInt } from 'node:crypto';

const BIRDS = ['heron', 'plover', 'linnet', 'curlew', 'dipper', 'siskin', 'avocet', 'wigeon', 'godwit', 'merlin', 'dunlin', 'gannet', 'petrel', 'osprey', 'smew', 'teal'];
const WEATHER = ['calm', 'brisk', 'misty', 'bright', 'frosty', 'windy', 'mild', 'clear', 'grey', 'early', 'late', 'high', 'low', 'still', 'warm', 'cool'];

/** A name for a fault that can be said over the telephone and found in the log. Example: "misty heron 4127". */
export function incidentName(): string {
  return `${WEATHER[randomInt(WEATHER.length)]} ${BIRDS[randomInt(BIRDS.length)]} ${randomInt(1000, 10_000)}`;
}
