/** Figures from outside, held against ours and listed on one page. */
package rigmorrow.model.outside;
