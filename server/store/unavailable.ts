const CODES = new Set(['ECONNREFUSED', 'ECONNRESET', 'ENOENT', 'EPIPE', 'ETIMEDOUT', 'ENOTFOUND', '57P01', '57P02', '57P03', '53300', '55P03', '57014', 'P1001', 'P1002', 'P1008', 'P1017', 'P2024', 'P2028']);
const WORDS = /connection terminated|connection error|timeout exceeded when trying to connect|not queryable|server closed the connection|can't reach database|database system is (starting up|shutting down)|pool after calling end/i;

/** True when the database is away for now, so that asking again later is right. */
export function isUnavailable(reason: unknown): boolean {
  if (typeof reason !== 'object' || reason === null) return false;
  const { code, message, cause } = reason as { code?: unknown; message?: unknown; cause?: unknown };
  if (typeof code === 'string' && (CODES.has(code) || code.startsWith('08'))) return true;
  if (typeof message === 'string' && WORDS.test(message)) return true;
  return cause !== undefined && cause !== reason && isUnavailable(cause);
}
