import { answer } from '../asking/answer.ts';
import { hairFor } from './hairFor.ts';

answer(hairFor);
