import type { Outcome } from './compare-with-limit.js';

/** Demand over limit, and its least and largest over what nobody stated [-]. */
export interface RatioReach {
  readonly stated?: number;
  readonly low?: number;
  readonly high?: number;
}

/**
 * Ratios of an outcome, also where it cannot be told because its bounds disagree.
 *
 * @param outcome - demand, limit, and the least and largest demand where they were bounded
 * @returns ratios [-]; empty where there is no limit
 */
export function ratioReach({ demand, limit, low, high }: Outcome): RatioReach {
  if (limit === undefined || !(limit > 0)) return {};
  return {
    ...(demand !== undefined && { stated: demand / limit }),
    ...(low !== undefined && { low: low / limit }),
    ...(high !== undefined && { high: high / limit }),
  };
}
