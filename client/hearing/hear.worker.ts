import { answer } from '../asking/answer.ts';
import { hearFor } from './hearFor.ts';

answer(hearFor);
