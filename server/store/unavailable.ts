const CODES = new Set(['ECONNREFUSED', 'ECONNRESET', 'ENOENT', 'EPIPE', 'ETIMEDOUT', 'ENOTFOUND', '57P01', '57P02', '57P03', '53300', '55P03', '57014', 'P1001', 'P1002', 'P1008', 'P1017', 'P2024', 'P2028']);
const WORDS = /connection terminated|connection error|timeout exceeded when trying to connect|not queryable|server closed the connection|can't reach database|database system is (starting up|shutting down|in recovery mode)|pool after calling end/i;
/** PostgreSQL's word for a disk without room, and the system's. */
const FULL = new Set(['53100', 'ENOSPC']);

interface Reason {
  code?: unknown;
  message?: unknown;
  cause?: unknown;
  /** What Prisma keeps of PostgreSQL's own code, and where. */
  originalCode?: unknown;
  meta?: { driverAdapterError?: unknown };
}

/** True of what was thrown, or of what it was thrown for. */
function holds(claim: (reason: Reason) => boolean, reason: unknown): boolean {
  if (typeof reason !== 'object' || reason === null) return false;
  const { cause, meta } = reason as Reason;
  return claim(reason) || (cause !== reason && holds(claim, cause)) || holds(claim, meta?.driverAdapterError);
}

const codesOf = ({ code, originalCode }: Reason): string[] => [code, originalCode].filter((one) => typeof one === 'string');

/** True when there is no room left to write to: it is right to ask again, and somebody has to make room. */
export const isFull = (reason: unknown): boolean => holds((one) => codesOf(one).some((code) => FULL.has(code)), reason);

const isAway = (reason: Reason): boolean => codesOf(reason).some((code) => CODES.has(code) || code.startsWith('08')) || (typeof reason.message === 'string' && WORDS.test(reason.message));

/** True when the database is away for now, so that asking again later is right. */
export const isUnavailable = (reason: unknown): boolean => isFull(reason) || holds(isAway, reason);
