import { serveJobs } from '../../../src/cli/workers/serve-jobs.js';
import { jobs } from './jobs-for-tests.js';

serveJobs(jobs);
