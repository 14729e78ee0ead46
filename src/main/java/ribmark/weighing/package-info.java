/** The weigh-up at the block: its pages, what they keep, and what they ask about a doubtful weight. It refuses to know how a block sheet is marked or signed. */
package ribmark.weighing;
