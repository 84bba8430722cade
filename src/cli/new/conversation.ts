/** The conversation of `pipeborne new`: one question after the other at a terminal, each answer looked at as it is given. */
import { cancel, intro, isCancel, log, outro, select, text } from '@clack/prompts';
import type { Issue } from '../../issues/issue.js';
import { sentenceOf } from '../../issues/print.js';
import { asksIn, belongsTo, exampleOf, type Question } from '../../starter/question.js';
import type { QuestionKey, RawAnswers } from '../../starter/questions.js';
import { faultOf } from '../../starter/read-answers.js';
import type { Terminal } from '../environment.js';

/** A conversation at a terminal. */
export interface Conversation {
  readonly begin: () => void;
  /** Asks what the answers lack; undefined where the person left. */
  readonly ask: (questions: readonly Question[], answers: RawAnswers) => Promise<RawAnswers | undefined>;
  /** Tells what does not fit, before it is asked again. */
  readonly tell: (issues: readonly Issue[]) => void;
  readonly end: (words: string) => void;
  readonly leave: (words: string) => void;
}

/**
 * Makes a conversation.
 *
 * @param terminal - where to ask
 * @param refuseMark - why a mark cannot be taken, for example because its file is there already
 * @returns the conversation, not yet begun
 */
export function conversationAt(
  terminal: Terminal,
  refuseMark: (mark: string) => string | undefined,
): Conversation {
  const common = { input: terminal.input, output: terminal.output };
  const askOne = async (question: Question, answers: RawAnswers): Promise<string | symbol> => {
    const units = answers.units === 'si' ? 'si' : 'us';
    const message = asksIn(question, answers.arrangement);
    if (question.kind.is === 'choice') {
      const options = question.kind.choices.map(({ value, means }) => ({
        value,
        label: means === undefined ? value : `${value} - ${means}`,
      }));
      return select({ ...common, message, options, showInstructions: false });
    }
    const mayBeLeft = question.otherwise !== undefined;
    const answer = await text({
      ...common,
      message: mayBeLeft ? `${message} (Enter if not known: ${question.otherwise})` : message,
      placeholder: `for example ${exampleOf(question, units)}`,
      validate: (found = '') => {
        if (found.trim() === '' && mayBeLeft) return undefined;
        const fault = faultOf(question, found, units);
        if (fault !== undefined) return faultWords(fault);
        return question.key === 'mark' ? refuseMark(found.trim()) : undefined;
      },
    });
    return isCancel(answer) ? answer : (answer ?? '').trim();
  };
  return {
    begin: () => intro('pipeborne new: a file to begin with', common),
    ask: async (questions, known) => {
      let answers = known;
      for (const question of questions) {
        if (!belongsTo(question, answers.arrangement) || answers[question.key as QuestionKey] !== undefined)
          continue;
        const answer = await askOne(question, answers);
        if (isCancel(answer) || typeof answer === 'symbol') return undefined;
        answers = { ...answers, [question.key]: answer };
      }
      return answers;
    },
    tell: (issues) => {
      for (const issue of issues) log.error(faultWords(issue), common);
    },
    end: (words) => outro(words, common),
    leave: (words) => cancel(words, common),
  };
}

/** What is wrong and what is wanted, in one sentence. */
function faultWords(issue: Issue): string {
  const { why, example } = issue.data;
  if (issue.code === 'starter.unusable') return `${why}; for example ${example}`;
  const { message, wanted } = sentenceOf(issue);
  return wanted === undefined ? message : `${message}: ${wanted}`;
}
