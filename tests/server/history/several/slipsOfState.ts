import type { AgreementState } from '../../../../core/agreement/state.ts';
import type { Slip } from '../record/happened.ts';

export const slipsOfState = ({ proposals }: AgreementState): Record<string, Slip> => Object.fromEntries(Object.values(proposals).map(({ id, status, revision, votes }) => [id, { status, revision, votes }]));
