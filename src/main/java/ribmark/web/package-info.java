/** What every page shares: the frame, forms, who may open what, the word "no". It knows no part of the trade and no table. */
package ribmark.web;
