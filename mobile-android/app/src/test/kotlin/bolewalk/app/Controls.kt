package bolewalk.app

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import kotlin.math.max

/** What a gloved hand and a screen reader need: every control large, apart from the next, with its words and its role. */
object Controls {
    private const val LEAST_DP = 55.9f
    private const val APART_DP = 7.9f
    private val isControl = SemanticsMatcher("can be tapped") { it.config.contains(SemanticsActions.OnClick) }

    fun faults(walk: Walk): List<String> {
        val nodes = walk.rule.onAllNodes(isControl).fetchSemanticsNodes().filter { it.layoutInfo.isPlaced }
        return nodes.flatMap(::own) + apart(nodes)
    }

    private fun own(node: SemanticsNode): List<String> = buildList {
        val words = wordsOf(node)
        if (words.isBlank()) add("no words: ${tagOf(node)}")
        val typed = node.config.contains(SemanticsActions.SetText)
        if (!typed && node.config.getOrNull(SemanticsProperties.Role) == null) add("no role: ${tagOf(node)} $words")
        val density = node.layoutInfo.density.density
        val (width, height) = node.size.width / density to node.size.height / density
        if (width < LEAST_DP || height < LEAST_DP) add("$width × $height dp: ${tagOf(node)} $words")
    }

    /** Those that are too near to each other. What lies in another belongs to it. */
    private fun apart(nodes: List<SemanticsNode>): List<String> = buildList {
        val seen = nodes.filter { it.boundsInRoot.width > 1 && it.boundsInRoot.height > 1 }
        seen.forEachIndexed { index, one ->
            val density = one.layoutInfo.density.density
            seen.drop(index + 1).filterNot { inside(it, one) || inside(one, it) }.forEach { other ->
                val gap = gap(one.boundsInRoot, other.boundsInRoot) / density
                if (gap < APART_DP) add("$gap dp between ${tagOf(one)} at ${one.boundsInRoot} and ${tagOf(other)} at ${other.boundsInRoot}")
            }
        }
    }

    private fun gap(one: Rect, other: Rect): Float {
        val across = max(other.left - one.right, one.left - other.right)
        val down = max(other.top - one.bottom, one.top - other.bottom)
        return max(across, down)
    }

    private fun tagOf(node: SemanticsNode) = node.config.getOrNull(SemanticsProperties.TestTag) ?: "untagged"

    private fun wordsOf(node: SemanticsNode): String = with(node.config) {
        (getOrNull(SemanticsProperties.ContentDescription).orEmpty() + getOrNull(SemanticsProperties.Text).orEmpty().map { it.text }).joinToString(" ")
    }
}

/** Whether a part of the screen lies in another. */
internal fun inside(one: SemanticsNode, other: SemanticsNode): Boolean = generateSequence(one.parent) { it.parent }.any { it.id == other.id }
