package bolewalk.app

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.text.TextLayoutResult
import kotlin.math.roundToInt

/** Contrast as the web content guidelines 2.1 define it (success criterion 1.4.6 asks for 7:1). */
fun contrast(one: Color, other: Color): Float {
    val (dark, light) = listOf(one.luminance(), other.luminance()).sorted()
    return (light + .05f) / (dark + .05f)
}

/** What eyes need: every text whole, on nothing else, and standing out from its ground. */
object Letters {
    private const val CONTRAST = 7f
    private val WORD = Regex("\\S*[\\p{L}\\p{N}]\\S*")
    private val isText = SemanticsMatcher("is text") { it.config.contains(SemanticsActions.GetTextLayoutResult) }

    fun faults(walk: Walk, picture: Picture): List<String> {
        val texts = texts(walk)
        val ground = Rect(0f, 0f, picture.width.toFloat(), picture.height.toFloat())
        val above = walk.rule.onAllNodes(hasTestTag("above")).fetchSemanticsNodes().map { it.boundsInRoot }
        return texts.flatMap { own(it, picture, ground, above) } + overlaps(texts)
    }

    /** Every word that is whole in sight, and where. */
    fun words(walk: Walk): List<Pair<String, Rect>> = texts(walk).flatMap { node ->
        val laid = laidOut(node) ?: return@flatMap emptyList()
        WORD.findAll(laid.layoutInput.text.text).map { word ->
            val letters = word.range.map(laid::getBoundingBox)
            val place = Rect(letters.minOf { it.left }, letters.minOf { it.top }, letters.maxOf { it.right }, letters.maxOf { it.bottom })
            word.value to place.translate(node.positionInRoot)
        }.filter { (_, at) -> at.intersect(node.boundsInRoot) == at }.toList()
    }

    private fun texts(walk: Walk) = walk.rule.onAllNodes(isText, useUnmergedTree = true).fetchSemanticsNodes()
        .filter { it.layoutInfo.isPlaced && it.boundsInRoot.width > 1 && it.boundsInRoot.height > 1 && wordsOf(it).isNotBlank() }

    private fun own(node: SemanticsNode, picture: Picture, ground: Rect, above: List<Rect>): List<String> = buildList {
        val words = wordsOf(node)
        val laid = laidOut(node) ?: return@buildList
        if (isCut(laid, node)) add("cut off: “$words”")
        brokenWord(laid)?.let { add("a word is broken in two: “$it” in “$words”") }
        val left = node.positionInRoot.x
        if (left < 0 || left + node.size.width > ground.width + 1) add("beyond the side of the screen: “$words”")
        // Only what is whole in sight: half a line has only half of its ink, and what has moved under a part that stays none.
        if (node.boundsInRoot.height >= node.size.height - 1 && above.none { it.overlaps(node.boundsInRoot) }) {
            val found = contrastIn(picture, node.boundsInRoot.intersect(ground))
            if (found < CONTRAST) add("contrast %.1f: “%s”".format(found, words))
        }
    }

    /** Some of its lines are left out, or run over its own edge. */
    private fun isCut(laid: TextLayoutResult, node: SemanticsNode): Boolean {
        val lines = laid.multiParagraph
        val widest = (0 until lines.lineCount).maxOf { lines.getLineRight(it) - lines.getLineLeft(it) }
        return lines.didExceedMaxLines || lines.height > node.size.height + 1 || widest > node.size.width + 1
    }

    /** A word that no longer fits in its line is broken where it falls. */
    private fun brokenWord(laid: TextLayoutResult): String? {
        val text = laid.layoutInput.text.text
        for (line in 0 until laid.lineCount - 1) {
            val end = laid.getLineEnd(line)
            if (end in 1 until text.length && text[end - 1].isLetterOrDigit() && text[end].isLetterOrDigit()) {
                return text.substring(maxOf(0, end - 8), minOf(text.length, end + 8))
            }
        }
        return null
    }

    private fun overlaps(texts: List<SemanticsNode>): List<String> = buildList {
        texts.forEachIndexed { index, one ->
            texts.drop(index + 1).forEach { other ->
                if (inside(other, one) || inside(one, other)) return@forEach
                val both = one.boundsInRoot.intersect(other.boundsInRoot)
                if (both.width > 1 && both.height > 1) add("“${wordsOf(one)}” lies on “${wordsOf(other)}”")
            }
        }
    }

    /** Between the commonest colour of a place and the one that stands out most from it. */
    private fun contrastIn(picture: Picture, at: Rect): Float {
        val counts = mutableMapOf<Int, Int>()
        for (y in at.top.roundToInt() until at.bottom.roundToInt().coerceAtMost(picture.height)) {
            for (x in at.left.roundToInt() until at.right.roundToInt().coerceAtMost(picture.width)) counts.merge(picture[x, y], 1, Int::plus)
        }
        val ground = Color((counts.maxByOrNull { it.value } ?: return CONTRAST).key)
        return counts.keys.maxOf { contrast(ground, Color(it)) }
    }

    private fun laidOut(node: SemanticsNode): TextLayoutResult? {
        val results = mutableListOf<TextLayoutResult>()
        node.config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(results)
        return results.firstOrNull()
    }

    private fun wordsOf(node: SemanticsNode): String = with(node.config) {
        getOrNull(SemanticsProperties.EditableText)?.text ?: getOrNull(SemanticsProperties.Text).orEmpty().joinToString(" ") { it.text }
    }
}
