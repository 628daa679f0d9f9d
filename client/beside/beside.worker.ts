import { answer } from '../asking/answer.ts';
import { besideFor } from './besideFor.ts';

answer(besideFor);
