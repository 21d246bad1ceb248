; `mif` inside a block, `maf` with its head
(statement
  (block) @function.inside) @function.around

(comment) @comment.inside
(comment)+ @comment.around
