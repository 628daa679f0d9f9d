/** Example: `capital('desk 3')` is "Desk 3". */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
