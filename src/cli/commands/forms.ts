import type { Command } from 'commander';
import { describeForm } from '../../sketch/index.ts';
import { type Session, withExample } from '../command.ts';
import { findForm } from '../find-form.ts';
import { formNames } from '../package-files.ts';
import { showProblems } from '../show-problems.ts';
import { say, type Terminal, widthOf } from '../terminal.ts';
import { textTable } from '../text-table.ts';
