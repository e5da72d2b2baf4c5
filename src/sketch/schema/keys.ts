/** Every key of the grammar, from which a misspelt one is put right. */
export const GRAMMAR_KEYS: readonly string[] = (
  'form grammar version title about parameters values points planes outlines openings parts checks label help kind default ' +
  'least most options at from over up by toward between share cross along back mirror turn about drop onto through facing ' +
  'start edges corners corner line arc batten to role when radius rise smooth bows long leaving arriving round chamfer suffix ' +
  'outline circle slot centre diameter width plunge thickness grain quantity left right centre_line pieces left_of joints dimensions angle needs say ' +
  'base use levellers top level places part pin deep at face turns trims inside against copies repeat step beam mirrored out handles moves views'
).split(' ');
