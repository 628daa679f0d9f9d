/** True where a key belongs to what the focus is on: a line being written, or a list or row of signs that has already taken it. */
export const keepsKeys = (event: KeyboardEvent): boolean => event.defaultPrevented || (event.target as HTMLElement).closest('input, textarea, [role=combobox], [role=listbox]') !== null;
