//! Medians and the like, and how a line with its budget is said.

export const sorted = (values) => [...values].sort((a, b) => a - b);

/// The value below which that share of all lies: 0.5 for the median, 0.95 for the slow end.
export function at(values, share) {
  const row = sorted(values);
  const place = share * (row.length - 1);
  const low = row[Math.floor(place)];
  return low + (row[Math.ceil(place)] - low) * (place % 1);
}

export const median = (values) => at(values, 0.5);

/// Says one figure with its budget; gives whether it is kept.
export function say(what, figure, budget, unit, more = '') {
  const kept = figure <= budget;
  const written = `${figure.toFixed(2)}${unit}`.padStart(11);
  console.log(`${what.padEnd(44)} ${written}   at most ${budget}${unit}  ${kept ? 'ok' : 'OVER'}${more ? `   ${more}` : ''}`);
  return kept;
}
