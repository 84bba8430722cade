import type { Sentences } from './sentence.js';

/** Every sentence shown to a person, by code. Each folder has a file of its own. */
export const sentences: Sentences = {};
