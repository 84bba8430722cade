import type { Sentences } from './sentence.js';

export const renderSentences: Sentences = {};
