export const partRoom = (part: string): string => `part:${part}`;
export const sessionRoom = (session: string): string => `session:${session}`;
