/** The samples, reviewed once for all tests that ask. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { type Review, readInstallation, review } from '../../src/index.js';
import { projectRoot } from '../architecture/source-tree.js';

const reviewed = new Map<string, Review>();

/** A sample as it is. */
export function reviewedSample(
  name: 'pool-hot-water' | 'library-chilled-water' | 'dairy-condenser-water',
): Review {
  const known = reviewed.get(name);
  if (known !== undefined) return known;
  const text = readFileSync(join(projectRoot, 'samples', `${name}.yaml`), 'utf8');
  const made = reviewOf(text);
  reviewed.set(name, made);
  return made;
}

/** A sample with its parsed file altered before it is reviewed. */
export function changedSample(name: string, change: (file: ReturnType<typeof parse>) => void): Review {
  const file = parse(readFileSync(join(projectRoot, 'samples', `${name}.yaml`), 'utf8'));
  change(file);
  return reviewOf(JSON.stringify(file));
}

function reviewOf(text: string): Review {
  const reading = readInstallation(text, { file: 'sample.yaml' });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return review(reading.installation);
}
