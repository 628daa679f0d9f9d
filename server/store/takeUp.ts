import type { EnsembleName, NotTakenUp } from './door.ts';
import type { Prisma } from './prisma-client/client.ts';

/** See `takeUp` of the door; within one transaction. */
export async function takeUp(tx: Prisma.TransactionClient, tokenHash: Uint8Array<ArrayBuffer>, known: string, now: Date): Promise<EnsembleName | NotTakenUp> {
  const { count } = await tx.signInLink.updateMany({ where: { tokenHash, invitation: true, usedAt: null, expiresAt: { gt: now }, ensembleId: { not: null } }, data: { usedAt: now } });
  const link = count ? await tx.signInLink.findUniqueOrThrow({ where: { tokenHash }, select: { personId: true, ensemble: { select: { id: true, name: true } } } }) : null;
  const invited = link && (await tx.belonging.findUnique({ where: { ensembleId_personId: { ensembleId: link.ensemble!.id, personId: link.personId } } }));
  if (!link || !invited) return 'over';
  const { personId, ensemble } = link;
  if (await tx.session.count({ where: { personId } })) return 'cameIn';
  const where = { ensembleId_personId: { ensembleId: ensemble!.id, personId: known } };
  if (await tx.belonging.findUnique({ where })) return 'hereAlready';
  await tx.departure.deleteMany({ where: { ensembleId: ensemble!.id, personId: known } });
  // Seats go with the belonging, which is the other's from now on; links go with the person.
  await tx.belonging.update({ where: { ensembleId_personId: { ensembleId: ensemble!.id, personId } }, data: { personId: known } });
  await tx.person.delete({ where: { id: personId } });
  return ensemble!;
}

/** Thrown so that what was written on the way does not stay. */
export class NotTaken extends Error {
  readonly why: NotTakenUp;
  constructor(why: NotTakenUp) {
    super(`The invitation was not taken up: ${why}.`);
    this.why = why;
  }
}
