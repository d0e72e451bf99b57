package bolewalk.app.look

import android.content.Context
import android.content.ContextWrapper
import android.content.res.Configuration
import android.content.res.Resources

/** A window's context whose resources are those of another language. */
internal class WordedContext(window: Context, words: Configuration) : ContextWrapper(window) {
    private val worded: Resources = window.createConfigurationContext(words).resources

    override fun getResources(): Resources = worded
}
