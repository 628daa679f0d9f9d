/** How music looks in this house, on the stand and on paper: the engraver's options. Thicknesses and distances are half staff spaces; chosen, not measured. */
export const APPEARANCE = {
  condense: 'none',
  header: 'none',
  footer: 'none',
  svgViewBox: true,
  svgRemoveXlink: true,
  scale: 100,
  pageMarginLeft: 0,
  pageMarginRight: 0,
  pageMarginTop: 0,
  pageMarginBottom: 0,
  font: 'Leipzig',
  mnumInterval: 0,
  xmlIdSeed: 7,
  svgAdditionalAttribute: ['fing@startid', 'slur@startid'],
  staffLineWidth: 0.2,
  barLineWidth: 0.34,
  stemWidth: 0.24,
  hairpinThickness: 0.26,
  hairpinSize: 2.6,
  dynamDist: 2.4,
  slurMidpointThickness: 0.5,
  slurEndpointThickness: 0.16,
  spacingNonLinear: 0.6,
} as const;

/** An engraver's text without the name of the part, which stands in the running head. Example: `withoutNames(text)`. */
export const withoutNames = (text: string): string => text.replace(/<(part-name|part-abbreviation)\b[^>]*>[\s\S]*?<\/\1>/g, '<$1/>');
