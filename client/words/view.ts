/** How the part lies on the stand, and what lies under its lines. */
export const view = {
  lines: (zoom: number) => `Line after line, ${Math.round(zoom * 100)} percent.`,
  paper: (zoom: number) => `Lines and pages as they will be printed, ${Math.round(zoom * 100)} percent.`,
  page: (page: number) => `page ${page}`,
  underneath: (part: string) => `${part} lies under every line.`,
  nothingUnderneath: 'Only your own part lies here.',
  noOthers: 'This work has no other string part.',
  unread: (measures: number) => `unread words in ${measures} ${measures === 1 ? 'measure' : 'measures'}`,
  comes: (part: string) => `${part} is being engraved.`,
};
