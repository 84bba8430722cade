import type { IssueData } from '../issue.js';
import type { Sentence } from './sentence.js';
import { say } from './tell.js';

/** An open item: what was found, how it is mended, and what it leads to if it is not. */
export const item =
  (message: (data: IssueData) => string, wanted: string, hint: string) =>
  (data: IssueData): Sentence => ({ message: message(data), wanted, hint });

/** Place of a finding. */
export const at = (data: IssueData) => say(data, 'at');
