import { certify } from '../core/bowing/stagger/mip.ts';
import { problemOf } from './staggerProblems.ts';

const [seed, limit] = process.argv.slice(2).map(Number);
process.stdout.write(JSON.stringify(await certify(problemOf(seed!), limit!)));
