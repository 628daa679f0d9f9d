import { answer } from '../asking/answer.ts';
import { planFor } from './planFor.ts';

answer(planFor);
