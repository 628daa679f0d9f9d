import { answer } from '../asking/answer.ts';
import { offersFor } from './offersFor.ts';

answer(offersFor);
