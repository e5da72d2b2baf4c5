import table from '../../shared/tables/usual-wood.json';

/** Wood to begin with, as a maker would type it. Source: shared/tables/usual-wood.json, all common practice. */
export const USUAL_WOOD_TYPED = table;
